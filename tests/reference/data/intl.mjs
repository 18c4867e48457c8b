// Records how ECMA-402 Intl (Unicode ICU) of node writes numbers, money and percentages:
// node intl.mjs > intl.json
const LOCALES = ["en-US", "es-US", "en-GB", "en-CA", "en-IN", "fr-FR", "fr-CA", "de-DE", "es-ES", "es-MX",
  "it-IT", "nl-NL", "pt-BR", "pl-PL", "sv-SE", "ja-JP"];
const CURRENCIES = ["USD", "EUR", "GBP", "JPY"];
const NUMBERS = [0, 7, 999, 1234, 12345, 1234567.8];
const AMOUNTS = [0.5, 9.5, 1234.5, 12345.67, 1234567.89];
const SHARES = [0, 0.125, 0.73, 1, 12.345];
const kinds = (parts) => parts.map(({ type, value }) => [type, value]);
const record = (locale) => {
  const money = (currency) => new Intl.NumberFormat(locale, { style: "currency", currency });
  const plain = new Intl.NumberFormat(locale);
  const percent = new Intl.NumberFormat(locale, { style: "percent", minimumFractionDigits: 1, maximumFractionDigits: 1 });
  return {
    locale,
    samples: {
      money: CURRENCIES.map((code) => [code, kinds(money(code).formatToParts(1234567.8))]),
      percent: kinds(new Intl.NumberFormat(locale, { style: "percent" }).formatToParts(0.5)),
      thousand: kinds(plain.formatToParts(1234)),
    },
    numbers: NUMBERS.map((it) => [String(it), plain.format(it)]),
    money: CURRENCIES.flatMap((code) => AMOUNTS.map((it) => [code, String(it), money(code).format(it)])),
    percents: SHARES.map((it) => [String(it), percent.format(it)]),
  };
};
console.log(JSON.stringify({ node: process.version, icu: process.versions.icu, locales: LOCALES.map(record) }));
