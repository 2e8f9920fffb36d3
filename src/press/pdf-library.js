// The PDF library behind declarations of our own: its published types bring in all of Node's.
export { default as PDFDocument } from 'pdfkit';
