/** How a document is set on paper: sizes and distances, as Typst writes them. */
export interface Setting {
  /** mm. */
  textWidth: number;
  top: string;
  bottom: string;
  text: string;
  leading: string;
  tableText: string;
  cellInset: string;
  title: string;
  longTitle: string;
  titleLeading: string;
  aboveTitle: string;
  belowTitle: string;
  lead: string;
  leadLeading: string;
  leadWidth: string;
  belowLead: string;
  /** Of first and second headings. */
  heading: readonly [string, string];
  aboveHeading: readonly [string, string];
  belowHeading: readonly [string, string];
  belowParagraph: string;
  betweenItems: string;
  aboveTable: string;
  belowTable: string;
  /** Short tables move to the next page as a whole, and do not go over its edge. */
  wholeTables: boolean;
}

export const USUAL: Setting = {
  textWidth: 170,
  top: '16mm',
  bottom: '18mm',
  text: '9.5pt',
  leading: '5pt',
  tableText: '9pt',
  cellInset: '(x: 3pt, y: 4pt)',
  title: '23pt',
  longTitle: '20pt',
  titleLeading: '8pt',
  aboveTitle: '18pt',
  belowTitle: '12pt',
  lead: '11.5pt',
  leadLeading: '6pt',
  leadWidth: '82%',
  belowLead: '14pt',
  heading: ['14pt', '11pt'],
  aboveHeading: ['22pt', '16pt'],
  belowHeading: ['9pt', '7pt'],
  belowParagraph: '7pt',
  betweenItems: '5pt',
  aboveTable: '10pt',
  belowTable: '12pt',
  wholeTables: true,
};

/** Small and close, so that everything about one cable is two pages; nothing under 8.5 pt but the foot of the page. */
export const TIGHT: Setting = {
  textWidth: 182,
  top: '12mm',
  bottom: '14mm',
  text: '8.5pt',
  leading: '3.2pt',
  tableText: '8.5pt',
  cellInset: '(x: 2.5pt, top: 3pt, bottom: 2.4pt)',
  title: '15pt',
  longTitle: '15pt',
  titleLeading: '5pt',
  aboveTitle: '9pt',
  belowTitle: '7pt',
  lead: '9.5pt',
  leadLeading: '4pt',
  leadWidth: '100%',
  belowLead: '6pt',
  heading: ['10.5pt', '9.5pt'],
  aboveHeading: ['9pt', '7pt'],
  belowHeading: ['4.5pt', '4pt'],
  belowParagraph: '4.5pt',
  betweenItems: '3pt',
  aboveTable: '4pt',
  belowTable: '5pt',
  wholeTables: false,
};
