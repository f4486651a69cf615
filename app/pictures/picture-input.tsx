/** Where a photograph is chosen. With `isCamera` a phone opens its camera; where none is held in a hand it is not shown. */
export function PictureInput({ id, label, isCamera }: { id: string; label: string; isCamera?: true }) {
  return (
    <div className={isCamera ? 'field in-hand' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <input
        className="in"
        type="file"
        id={id}
        name="picture"
        accept="image/jpeg,image/png,image/webp"
        {...(isCamera && { capture: 'environment' as const })}
      />
    </div>
  );
}
