import type { DatasetFacts, Licence } from '../document/blocks.ts';

/**
 * The data described for search engines: a schema.org Dataset as JSON-LD. Names only what is in the report.
 *
 * Source of the terms: schema.org, Dataset and PropertyValue.
 */
export function datasetJsonLd(facts: DatasetFacts, licence: Licence): Record<string, unknown> {
  return {
    '@context': 'https://schema.org',
    '@type': 'Dataset',
    name: facts.name,
    description: facts.description,
    license: licence.address,
    isAccessibleForFree: true,
    identifier: `sha256:${facts.content}`,
    version: facts.content.slice(0, 16),
    creator: { '@type': 'Organization', name: facts.creator },
    ...(facts.published === null ? {} : { datePublished: facts.published }),
    measurementTechnique: facts.techniques,
    variableMeasured: facts.measured.map(({ name, unit }) => ({ '@type': 'PropertyValue', name, unitText: unit })),
    creditText: `Computed by Cupel ${facts.version}`,
  };
}

/** JSON for a script element: nothing in it can end the element or open a comment. */
export function scriptJson(value: unknown): string {
  return JSON.stringify(value).replace(
    /[<>&\u2028\u2029]/g,
    (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
