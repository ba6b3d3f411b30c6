// Examples as the page imports them: their texts.
declare module "*.yaml?raw" {
  const text: string;
  export default text;
}
