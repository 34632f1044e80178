import { useEffect } from "preact/hooks";

/** Tells the printer the page's size while the screen that prints on it is open; mm. */
export function usePageSize(width: number, height: number): void {
  useEffect(() => {
    // A style sheet of the page's own making: its policy allows no styles written into it.
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${width}mm ${height}mm; margin: 0 }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [width, height]);
}
