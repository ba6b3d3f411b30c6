// What a thing of the shop may be called where its name stands in programs and in names of files.

export const NAME_PATTERN = {
  regex: /^[A-Za-z0-9](?:[A-Za-z0-9._-]*[A-Za-z0-9_-])?$/,
  words: "letters, digits, dots, dashes and underscores",
};
