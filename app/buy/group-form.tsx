import { ActionButton } from '@/app/look/action';
import { Field } from '@/app/look/field';

/** Adds sets to the group by their tags. */
export function GroupForm({ tags }: { tags: readonly string[] }) {
  return (
    <form action="/buy" className="filters screen-only">
      {tags.map((tag) => (
        <input key={tag} type="hidden" name="tag" value={tag} />
      ))}
      <Field
        label={tags.length === 0 ? 'Tags of the sets, with commas between them' : 'Add sets by their tags, with commas'}
        name="add"
        maxLength={400}
      />
      <ActionButton second>{tags.length === 0 ? 'Show' : 'Add'}</ActionButton>
    </form>
  );
}
