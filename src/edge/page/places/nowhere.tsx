import { Frame } from '../parts/frame.tsx';

/** An address that names no place of this page. */
export function Nowhere({ path }: { path: string }) {
  return (
    <Frame title="No such place" places={[{ name: 'Shelf', href: '/', here: false, state: '' }]}>
      <h1>There is no place at this address.</h1>
      <p>
        Found <code>{path}</code>; expected the shelf or a trial. <a href="/">Go to the shelf</a>
      </p>
    </Frame>
  );
}
