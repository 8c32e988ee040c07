import { useLayoutEffect, useRef } from 'preact/hooks';

/** An SVG that the core has written, as it stands; its text was escaped there, and nothing in it can run. */
export function SvgShown({ svg, label }: { svg: string; label: string }) {
  const box = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const read = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    box.current?.replaceChildren(document.importNode(read, true));
  }, [svg]);
  return <div class="sheet-svg" ref={box} role="img" aria-label={label} />;
}
