import { useEffect, useState } from 'preact/hooks';

/** From here on list, plan and readings stand side by side. The style sheet says the same. */
export const WIDE = '(min-width: 1100px)';

export function useWide(): boolean {
  const [wide, setWide] = useState(() => matchMedia(WIDE).matches);
  useEffect(() => {
    const query = matchMedia(WIDE);
    const read = (): void => setWide(query.matches);
    query.addEventListener('change', read);
    return () => query.removeEventListener('change', read);
  }, []);
  return wide;
}
