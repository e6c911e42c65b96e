import { useEffect, useRef } from 'preact/hooks';
import { REPORT_STYLE } from '../../../../report/publish/html/style.ts';

/** The report's own look, for the inside of a shadow root. */
const SHEET = REPORT_STYLE.replace(/^:root\{/m, ':host{').replace(
  /^body\{margin:0 auto;padding:40px 24px 64px/m,
  '.paper{margin:0 auto;padding:24px',
);

/**
 * The report as it will look: in a root of its own, so that its look and the page's do not touch. `second`: another one stands on
 * the page already, whose parts have the same names; those of this one are then no landmarks.
 */
export function ReportPreview({ body, second = false }: { body: string; second?: boolean }) {
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const root = element.shadowRoot ?? element.attachShadow({ mode: 'open' });
    if (root.adoptedStyleSheets.length === 0) {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(SHEET);
      root.adoptedStyleSheets = [sheet];
    }
    // Made by the report's pure functions, which escape every text that a person typed.
    root.innerHTML = `<div class="paper">${body}</div>`;
    if (!second) return;
    for (const part of root.querySelectorAll('nav')) part.setAttribute('aria-label', 'Contents of the draft');
    for (const part of root.querySelectorAll('section')) part.setAttribute('role', 'group');
  }, [body, second]);
  useEffect(() => {
    const root = host.current?.shadowRoot;
    // The contents lead within the preview; the page's own address stays.
    const follow = (event: Event) => {
      const link = event.target instanceof Element ? event.target.closest('a') : null;
      const named = link?.getAttribute('href') ?? '';
      if (!named.startsWith('#')) return;
      event.preventDefault();
      root?.getElementById(named.slice(1))?.scrollIntoView({ block: 'start' });
    };
    root?.addEventListener('click', follow);
    return () => root?.removeEventListener('click', follow);
  }, []);
  return <div ref={host} class="report-preview" />;
}
