// The way to an invented group, where there is no child yet and such a group can be made.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { useGround } from './use-ground.ts';
import { words } from './words.ts';

export function TryDemo() {
  const { tryDemo } = useGround();
  const [isMaking, setMaking] = useState(false);
  const [objection, setObjection] = useState('');
  if (tryDemo === undefined) return null;
  const start = async () => {
    setMaking(true);
    setObjection(await tryDemo());
    setMaking(false);
  };
  return (
    <>
      <Button className="plain" isPending={isMaking} onPress={() => void start()}>
        {isMaking ? words.makingDemo : words.tryDemo}
      </Button>
      <p className="help">{words.demoAbout}</p>
      <p className="objection" role="alert">
        {objection}
      </p>
    </>
  );
}
