/** An address or a number that is nothing else: only such a one becomes something to tap. */
const MAIL = /^[\w.+-]{1,64}@[\w-]{1,63}(\.[\w-]{1,63}){1,4}$/;
const PHONE = /^\+?[\d ().-]{5,24}$/;

/** How to reach somebody, as they wrote it; what is plainly a number or a mail address can be tapped. */
export function ContactLine({ contact }: { contact: string }) {
  const parts = contact.split(/([,;\n]\s*)/);
  return (
    <span class="contact" dir="auto">
      {parts.map((part, place) => {
        const target = targetOf(part.trim());
        return target === null ? (
          part
        ) : (
          <a key={`${place} ${part}`} href={target}>
            {part}
          </a>
        );
      })}
    </span>
  );
}

function targetOf(text: string): string | null {
  if (MAIL.test(text)) return `mailto:${text}`;
  return PHONE.test(text) && /\d{3}/.test(text) ? `tel:${text.replace(/[^\d+]/g, '')}` : null;
}
