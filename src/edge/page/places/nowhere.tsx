import { Frame } from '../parts/frame.tsx';

/** An address that names no place of this page. */
export function Nowhere({ path }: { path: string }) {
  return (
    <Frame title="No such place" places={[{ name: 'Shelf', href: '/', here: false, state: '' }]}>
      <h1>There is no place at this address.</h1>
      <p>
        Found{' '}
        <code>
          <bdi dir="auto">{path}</bdi>
        </code>
        ; expected the shelf (<code>/</code>), or a place of a trial such as <code>/trial/my-trial/inside</code>.
      </p>
      <p>
        <a href="/">Go to the shelf</a>
      </p>
    </Frame>
  );
}
