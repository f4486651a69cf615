/** The button of a table's form that prints labels of what is ticked. */
export function LabelsOfChosen({ list }: { list: 'sets' | 'motors' }) {
  return (
    <button type="submit" className="second" formAction="/labels" name="list" value={list}>
      Print labels of the chosen
    </button>
  );
}
