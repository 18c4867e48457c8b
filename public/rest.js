// What the page needs beyond the first screen: the rest of its style, and what the app asks of Intl.
// A region is a tag, or nothing for the browser's own.

const FORMS = [
  { day: "numeric", month: "short", year: "numeric" },
  { day: "numeric", month: "short" },
  { hour: "numeric", minute: "2-digit" },
  { month: "long" },
];

// The plural rules of each language: to make them takes longer than to ask them.
const plurals = {};

Object.assign(globalThis.brimwrightIntl, {
  // A year under 100 would be taken as one of the last century.
  when(region, form, year, month, day, hour, minute) {
    const date = new Date(2000, month - 1, day, hour, minute);
    date.setFullYear(year, month - 1, day);
    return new Intl.DateTimeFormat(region, FORMS[form]).format(date);
  },
  plural: (language, number) => (plurals[language] ??= new Intl.PluralRules(language)).select(number),
  name(language, type, code) {
    try {
      return new Intl.DisplayNames(language, { type, languageDisplay: "standard", fallback: "none" }).of(code);
    } catch {}
  },
});

let style;

// Puts the rest of the style in force; once it is, or could not be had, the promise says so. What
// could not be had is asked for again.
export function addStyle() {
  style ??= new Promise((here, lost) => {
    const link = document.createElement("link");
    link.rel = "stylesheet";
    link.href = new URL("./style-rest.css", import.meta.url);
    link.onload = here;
    link.onerror = () => {
      link.remove();
      style = undefined;
      lost(Error(`${link.href}: no style`));
    };
    document.head.append(link);
  });
  return style;
}
