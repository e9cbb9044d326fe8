// Words of the command, with what a maker types set apart: it stands between backticks in them.

export function Worded({ text }: { text: string }) {
  const pieces = text.split(/`([^`]+)`/);
  return <>{pieces.map((each, at) => (at % 2 === 1 ? <code>{each}</code> : each))}</>;
}
