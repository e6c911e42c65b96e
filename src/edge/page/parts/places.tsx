/** One place on the ruler. */
export interface PlaceOnRuler {
  name: string;
  href: string;
  here: boolean;
  /** A few words beside the name, such as '6 findings'; may be empty. */
  state: string;
}

/** The places as a measuring rule: a long tick at each, the present one heavier. */
export function Places({ places }: { places: readonly PlaceOnRuler[] }) {
  return (
    <nav class="places" aria-label="Places">
      <ul>
        {places.map((place) => (
          <li key={place.name} class={place.here ? 'here' : ''}>
            <a href={place.href} aria-current={place.here ? 'page' : undefined}>
              <span class="place">{place.name}</span>
              {place.state !== '' && <span class="state">{place.state}</span>}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
