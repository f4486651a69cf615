/** A tag or plant number in running text: whole on its line while it is short, its direction its own. */
export function Tag({ children }: { children: string }) {
  return <bdi className={children.length > 16 ? 'tag' : 'tag nowrap'}>{children}</bdi>;
}
