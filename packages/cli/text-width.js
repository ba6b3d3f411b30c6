// Stands in the bundle for the package string-width, with which yargs lays out help. That package knows emoji and scripts of double
// width, and takes longer to load than all else that a command's start needs; our help has neither.
export default (text) => [...text].length;
