interface PictureProps {
  svg: string;
  class?: string;
  /** True when the text beside it says the same, so that the drawing is passed over when the page is read aloud. */
  silent?: boolean;
}

/**
 * A drawing made by the report's pure functions, set into the page as it stands. They escape every text that a person
 * typed; nothing else may be handed to this part.
 */
export function Picture({ svg, class: name = '', silent = false }: PictureProps) {
  return (
    <span
      class={`picture ${name}`}
      aria-hidden={silent ? 'true' : undefined}
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
