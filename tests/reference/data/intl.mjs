// Records how ECMA-402 Intl (Unicode ICU) of node writes numbers, money, percentages, days and
// times: node intl.mjs > intl.json
const LOCALES = ["en-US", "es-US", "en-GB", "en-CA", "en-IN", "fr-FR", "fr-CA", "de-DE", "es-ES", "es-MX",
  "it-IT", "nl-NL", "pt-BR", "pl-PL", "sv-SE", "ja-JP"];
const CURRENCIES = ["USD", "EUR", "GBP", "JPY"];
const NUMBERS = [0, 7, 999, 1234, 12345, 1234567.8];
const AMOUNTS = [0.5, 9.5, 1234.5, 12345.67, 1234567.89];
const SHARES = [0, 0.125, 0.73, 1, 12.345];
const DAYS = [[2026, 0, 1], [2026, 2, 9], [2026, 4, 23], [2026, 7, 31], [2026, 10, 23], [2027, 11, 5]];
const TIMES = [[0, 0], [0, 30], [9, 5], [12, 30], [17, 5], [23, 59]];
const kinds = (parts) => parts.map(({ type, value }) => [type, value]);
const day = ([year, month, date]) => new Date(year, month, date, 12);
const record = (locale) => {
  const money = (currency) => new Intl.NumberFormat(locale, { style: "currency", currency });
  const plain = new Intl.NumberFormat(locale);
  const percent = new Intl.NumberFormat(locale, { style: "percent", minimumFractionDigits: 1, maximumFractionDigits: 1 });
  const withYear = new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", year: "numeric" });
  const withoutYear = new Intl.DateTimeFormat(locale, { day: "numeric", month: "short" });
  const time = new Intl.DateTimeFormat(locale, { hour: "numeric", minute: "2-digit" });
  const months = [...Array(12).keys()].map((month) => day([2026, month, 23]));
  const at = ([hour, minute]) => new Date(2026, 0, 23, hour, minute);
  return {
    locale,
    samples: {
      money: CURRENCIES.map((code) => [code, kinds(money(code).formatToParts(1234567.8))]),
      percent: kinds(new Intl.NumberFormat(locale, { style: "percent" }).formatToParts(0.5)),
      thousand: kinds(plain.formatToParts(1234)),
      with_year: months.map((it) => kinds(withYear.formatToParts(it))),
      without_year: months.map((it) => kinds(withoutYear.formatToParts(it))),
      morning: kinds(time.formatToParts(at([9, 5]))),
      evening: kinds(time.formatToParts(at([21, 5]))),
    },
    numbers: NUMBERS.map((it) => [String(it), plain.format(it)]),
    money: CURRENCIES.flatMap((code) => AMOUNTS.map((it) => [code, String(it), money(code).format(it)])),
    percents: SHARES.map((it) => [String(it), percent.format(it)]),
    days: DAYS.map((it) => [it[0], it[1] + 1, it[2], withYear.format(day(it)), withoutYear.format(day(it))]),
    times: TIMES.map((it) => [...it, time.format(at(it))]),
  };
};
console.log(JSON.stringify({ node: process.version, icu: process.versions.icu, locales: LOCALES.map(record) }));
