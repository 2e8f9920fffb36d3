// The name of the database of the records, for who only asks whether there is one.

export const RECORDS_DATABASE = 'samewise-records';
