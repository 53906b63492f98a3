/** A page of a sheet and what is drawn on it; sizes in mm. */
export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly svg: SVGSVGElement;
}

/** Prints sheets at full size, and nothing else of the page. */
export const printPages = (pages: readonly PrintedPage[]): void => {
  // Pages of a roll differ in length, so each kind of page has a name.
  const style = document.createElement('style');
  style.append(
    ...pages.map(
      ({ width, height }, i) =>
        `@page sheet-${i} { size: ${width}mm ${height}mm; margin: 0 } #print > :nth-child(${i + 1}) { page: sheet-${i} }\n`,
    ),
  );
  const host = document.createElement('div');
  host.id = 'print';
  host.append(...pages.map(({ svg }) => svg));
  document.head.append(style);
  document.body.append(host);
  addEventListener(
    'afterprint',
    () => {
      host.remove();
      style.remove();
    },
    { once: true },
  );
  print();
};
