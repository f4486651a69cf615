import type { OpenLink } from '@/lib/register/queries/link-by-secret';
import { answerStatus } from './answer-status';
import { AskForm } from './ask-form';
import type { AskState } from './ask-state';
import { Sheet } from './look/sheet';

/** What somebody sees who follows a link: whom it is for and one field, or that it no longer works. */
export function LinkSheet({
  link,
  secret,
  title,
  says,
  action,
}: {
  link: OpenLink | null;
  secret: string;
  title: string;
  says: string;
  action: (before: AskState, form: FormData) => Promise<AskState>;
}) {
  if (link === null) {
    answerStatus(404);
    return (
      <Sheet isBare>
        <h1 className="page">This link does not work</h1>
        <p className="mt-2">
          A link works once, within an hour of being made. Ask an administrator of your site for a new one.
        </p>
        <p className="mt-2">
          <a className="inline-act" href="/sign-in">
            Sign in
          </a>
        </p>
      </Sheet>
    );
  }
  return (
    <Sheet isBare>
      {/* The answer's own policy is "no-referrer", under which a form sent without script over plain HTTP has no origin
          and looks foreign. "origin" keeps the secret as well: it tells the host and no path. */}
      <meta name="referrer" content="origin" />
      <h1 className="page">{title}</h1>
      <p className="mt-2">
        <bdi>{link.name}</bdi>, <bdi>{link.site}</bdi>
      </p>
      <p className="mt-2">{says}</p>
      <AskForm
        id="link-form"
        action={action}
        fields={[
          { kind: 'hidden', name: 'link', value: secret },
          {
            kind: 'email',
            name: 'email',
            label: 'E-mail',
            value: link.email,
            autoComplete: 'username',
            readOnly: true,
          },
          {
            kind: 'password',
            name: 'password',
            label: 'New password',
            autoComplete: 'new-password',
            hint: 'At least 12 characters, any of them; a few words that do not belong together are good. Pasting works.',
          },
        ]}
        button="Set the password"
        main
      />
    </Sheet>
  );
}
