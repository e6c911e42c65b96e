import type { ComponentChildren } from 'preact';

export interface WayToBegin {
  title: string;
  text: string;
  links: readonly (readonly [words: string, address: string])[];
}

interface WaysToBeginProps {
  /** What is not there yet. */
  sentence: string;
  /** The first link of the first is the main one. */
  ways: readonly WayToBegin[];
  /** What is on record all the same. */
  children?: ComponentChildren;
}

/** What to do in a place where nothing is on record yet: one short way beside the other. */
export function WaysToBegin({ sentence, ways, children }: WaysToBeginProps) {
  return (
    <>
      <h1>{sentence}</h1>
      <div class="ways">
        {ways.map(({ title, text, links }, at) => (
          <section key={title}>
            <h2>{title}</h2>
            <p>{text}</p>
            <p class="buttons">
              {links.map(([words, address], i) => (
                <a key={words} class={at === 0 && i === 0 ? 'button main' : 'button'} href={address}>
                  {words}
                </a>
              ))}
            </p>
          </section>
        ))}
      </div>
      {children}
    </>
  );
}
