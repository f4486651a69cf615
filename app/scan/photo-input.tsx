/** A photograph of the code: a phone opens its camera for it, which needs no https. */
export function PhotoInput({ id, onPhoto }: { id: string; onPhoto: (file: File) => void }) {
  return (
    <div className="field">
      <label htmlFor={id}>A photo of the code</label>
      <input
        className="in"
        type="file"
        id={id}
        accept="image/*"
        capture="environment"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file !== undefined) onPhoto(file);
          currentTarget.value = ''; // the same photograph can be chosen again
        }}
      />
    </div>
  );
}
