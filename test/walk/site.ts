import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { hourField } from '@/app/site/settings-state';
import { WORK_IDS } from '@/lib/plant/work';

/** The first site of the running demonstration, looked at past the program: what it holds, and a sum of all of it. */
export class Site {
  private readonly known = new Map<string, string>();
  /** What it has and no other site: tags, numbers, names of areas and people, addresses. */
  words: string[] = [];
  private people: { id: string; name: string; role: string }[] = [];

  private constructor(
    private readonly db: pg.Client,
    readonly id: string,
    private readonly html: (path: string) => Promise<string>,
  ) {}

  /** `tag` is a set of the site; `html` gets a page as its administrator. */
  static async of(url: string, tag: string, html: (path: string) => Promise<string>): Promise<Site> {
    const db = new pg.Client(url);
    await db.connect();
    const { rows } = await db.query('SELECT site_id AS id FROM pump_set WHERE tag = $1', [tag]);
    const site = new Site(db, rows[0].id, html);
    const one = (sql: string) => site.one(sql);
    site.known.set('siteId', site.id);
    site.known.set('set', tag);
    site.known.set('setId', await one(`SELECT id FROM pump_set WHERE site_id = $1 AND tag = '${tag}'`));
    const shelved = `FROM motor WHERE site_id = $1 AND place = 'on-shelf' ORDER BY plant_number LIMIT 1`;
    for (const [name, sql] of [
      ['motor', `SELECT plant_number ${shelved}`],
      ['motorId', `SELECT id ${shelved}`],
      ['label', `SELECT code FROM pump_set WHERE site_id = $1 AND tag = '${tag}'`],
      ['shelf', `SELECT shelf_id ${shelved}`],
      ['store', `SELECT id FROM store WHERE site_id = $1 ORDER BY name LIMIT 1`],
      ['area', `SELECT id FROM area WHERE site_id = $1 ORDER BY name LIMIT 1`],
      ['person', `SELECT id FROM "user" WHERE site_id = $1 AND role = 'technician' AND retired_at IS NULL LIMIT 1`],
      ['swap', `SELECT id FROM swap WHERE site_id = $1 LIMIT 1`],
      ['fault', `SELECT id FROM fault WHERE site_id = $1 ORDER BY at LIMIT 1`],
    ] as const)
      site.known.set(name, await one(sql));
    site.known.set('change', await site.lastChange('set.register'));
    site.known.set('import', await site.madeImport('checked'));
    site.words = await site.wordsOfIt();
    return site;
  }

  end = () => this.db.end();
  value = (name: string): string => this.known.get(name) ?? missing(name);
  set = (name: string, value: string) => this.known.set(name, value);
  /** A text with its {names} filled in. */
  filled = (text: string): string =>
    text.replaceAll(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(this.value(name)));

  /** A body as it is sent: as it stands, or as JSON with its {names} filled in. */
  filledBody = (body: unknown): string | undefined =>
    body === undefined || typeof body === 'string'
      ? body
      : JSON.stringify(body).replaceAll(/"\{(\w+)\}"/g, (_, name: string) => JSON.stringify(this.value(name)));

  personOf = (role: string): string => this.people.find((one) => one.role === role)?.id ?? missing(role);
  nameOf = (role: string | null): string | null => this.people.find((one) => one.role === role)?.name ?? null;

  private async wordsOfIt(): Promise<string[]> {
    const people = await this.db.query(
      `SELECT id, name, role FROM "user" WHERE site_id = $1 AND email LIKE '%@example.com' AND email LIKE role || '@%'`,
      [this.id],
    );
    this.people = people.rows;
    const words = `SELECT tag AS word, site_id FROM pump_set UNION SELECT plant_number, site_id FROM motor
      UNION SELECT name, site_id FROM area UNION SELECT name, site_id FROM "user" UNION SELECT email, site_id FROM "user"`;
    const { rows } = await this.db.query(
      `SELECT word FROM (${words}) AS w WHERE site_id = $1 AND word NOT IN (SELECT word FROM (${words}) AS v WHERE site_id <> $1)`,
      [this.id],
    );
    return rows.map(({ word }) => word);
  }

  private async one(sql: string, ...values: unknown[]): Promise<string> {
    const { rows } = await this.db.query(sql, [this.id, ...values]);
    const [value] = Object.values(rows[0] ?? {});
    if (value === undefined || value === null) throw new Error(`nothing for ${sql}`);
    return String(value);
  }

  /** A sum over every row of the site, its people's sessions and passwords: whatever changes, it changes. */
  async sum(siteId = this.id): Promise<string> {
    const { rows } = await this.db.query(
      `SELECT table_name AS name FROM information_schema.columns
       WHERE table_schema = 'public' AND column_name = 'site_id' ORDER BY table_name`,
    );
    const parts = rows.map(
      ({ name }) =>
        `SELECT '${name}' AS t, md5(coalesce(string_agg(x::text, '|' ORDER BY x::text), '')) AS s FROM ${pg.escapeIdentifier(name)} AS x WHERE site_id = $1`,
    );
    const users = `(SELECT id FROM "user" WHERE site_id = $1)`;
    parts.push(
      `SELECT 'session', md5(coalesce(string_agg(id, '|' ORDER BY id), '')) FROM session WHERE "userId" IN ${users}`,
      `SELECT 'account', md5(coalesce(string_agg(password, '|' ORDER BY id), '')) FROM account WHERE "userId" IN ${users}`,
    );
    const sums = await this.db.query(parts.join(' UNION ALL '), [siteId]);
    return sums.rows.map(({ t, s }) => `${t} ${s}`).join('\n');
  }

  async otherSite(): Promise<string> {
    return this.one(
      `SELECT id FROM site WHERE id <> $1 AND EXISTS (SELECT FROM pump_set WHERE site_id = site.id) LIMIT 1`,
    );
  }

  async record(table: string, name: string): Promise<{ record: string; version: string }> {
    const record = this.value(name);
    const version = await this.one(`SELECT version FROM ${table} WHERE site_id = $1 AND id = $2`, record);
    return { record, version };
  }

  lastChange = (action: string) =>
    this.one(`SELECT change_id FROM audit_entry WHERE site_id = $1 AND action = $2 ORDER BY at DESC LIMIT 1`, action);

  /** The row that was made last of those that stand. */
  last = (table: 'api_token' | 'person_link'): Promise<string> =>
    this.one(`SELECT id FROM ${table} WHERE site_id = $1 AND revoked_at IS NULL ORDER BY created_at DESC LIMIT 1`);
  lastAcceptance = (): Promise<string> =>
    this.one(`SELECT id FROM acceptance WHERE site_id = $1 AND withdrawn_at IS NULL ORDER BY at DESC LIMIT 1`);

  lastReviewAcceptance = (): Promise<string> =>
    this.one(`SELECT id FROM review_acceptance WHERE site_id = $1 AND withdrawn_at IS NULL ORDER BY at DESC LIMIT 1`);

  /** The motor in the set goes to repair for another one; a person says so, whatever the judgement. */
  async swap(): Promise<Record<string, string>> {
    const shelved = `SELECT plant_number FROM motor WHERE site_id = $1 AND place = 'on-shelf' AND retired_at IS NULL`;
    return {
      ...{ tag: this.value('set'), key: randomUUID(), why: 'Bearing', outTo: 'at-repair', note: 'Walked' },
      motor: await this.one(`${shelved} AND plant_number <> $2 ORDER BY plant_number LIMIT 1`, this.value('motor')),
      motorOutId: await this.one(`SELECT id FROM motor WHERE site_id = $1 AND set_id = $2`, this.value('setId')),
      fromSetId: '',
    };
  }

  /** A photograph of the motor, which nobody has to be able to read. */
  madePicture(): Promise<string> {
    return this.one(
      `INSERT INTO attachment (site_id, motor_id, by_id, media_type, sha256, content)
       VALUES ($1, $2, $3, 'image/webp', $4, '\\x00') RETURNING id`,
      this.value('motorId'),
      this.value('person'),
      randomUUID(),
    );
  }

  /** A fault that is open, at the set. */
  madeFault(): Promise<string> {
    return this.one(
      `INSERT INTO fault (site_id, set_id, by_id, seen) VALUES ($1, $2, $3, ARRAY['trip']) RETURNING id`,
      this.value('setId'),
      this.value('person'),
    );
  }

  /** Somebody's motor that is at repair, with nothing but its number. */
  motorAtRepair(): Promise<string> {
    const number = `R-${randomUUID().slice(0, 8)}`;
    return this.one(
      `INSERT INTO motor (site_id, plant_number, place) VALUES ($1, $2, 'at-repair') RETURNING id`,
      number,
    );
  }

  async madeRepair(): Promise<{ repairId: string; version: string }> {
    const repairId = await this.one(
      `INSERT INTO repair (site_id, motor_id, by_id, reason) VALUES ($1, $2, $3, 'Walked') RETURNING id`,
      await this.motorAtRepair(),
      this.value('person'),
    );
    return { repairId, version: '1' };
  }

  async emptyShelf(): Promise<{ record: string; version: string }> {
    const record = await this.one(
      `INSERT INTO shelf (site_id, store_id, name) VALUES ($1, $2, $3) RETURNING id`,
      this.value('store'),
      `Empty ${randomUUID().slice(0, 8)}`,
    );
    return { record, version: '1' };
  }

  async settings(): Promise<Record<string, string>> {
    const version = await this.one('SELECT version FROM site WHERE id = $1');
    const hours = Object.fromEntries(WORK_IDS.map((id) => [hourField(id), '1']));
    return { ...hours, shimLimitMm: '7', hoursPerYear: '6000', pricePerKwh: '0.15', currency: 'EUR', version };
  }

  readImport = () => this.madeImport('ready');
  checkedImport = () => this.madeImport('checked');

  private async madeImport(status: 'ready' | 'checked'): Promise<string> {
    const column = (index: number, heading: string, field: string) => ({
      ...{ index, heading, field, unit: null, because: 'name', examples: [] },
    });
    const columns = {
      ...{ headingLines: [1], firstDataLine: 2, problems: [], options: {}, makePlaces: true },
      columns: [column(0, 'Tag', 'tag'), column(1, 'Held by', 'mounting')],
    };
    const dialect = {
      ...{ format: 'csv', encoding: 'utf-8', hasMark: false, delimiter: ',', decimal: null, sheet: null, sheets: [] },
      says: [],
    };
    const counts = { rows: 0, done: 0, new: 0, changed: 0, same: 0, passed: 0, refused: 0, applied: 0 };
    return this.one(
      `INSERT INTO import_run (site_id, by_id, file_name, file_sha256, kind, status, columns, dialect, counts)
       VALUES ($1, $2, 'walk.csv', repeat('0', 64), 'sets', $3, $4, $5, $6) RETURNING id`,
      this.value('person'),
      status,
      columns,
      dialect,
      counts,
    );
  }

  /** Waits until no job is at work on an import. */
  async atRest(): Promise<void> {
    for (let i = 0; i < 200; i += 1) {
      const { rows } = await this.db.query(
        `SELECT 1 FROM import_run WHERE site_id = $1 AND status IN ('reading', 'checking', 'applying', 'undoing')`,
        [this.id],
      );
      if (rows.length === 0) return;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    throw new Error('an import is at work for 20 s');
  }

  /** Somebody more of the site, with nothing but their name. */
  extraPerson(isRetired = false): Promise<string> {
    const id = randomUUID();
    return this.one(
      `INSERT INTO "user" (id, name, email, role, site_id, retired_at, "updatedAt", "emailVerified")
       VALUES ($2, 'Una Holm', $3, 'technician', $1, $4, now(), true) RETURNING id`,
      id,
      `${id}@example.com`,
      isRetired ? new Date() : null,
    );
  }

  async someoneSignedIn(): Promise<string> {
    const userId = await this.extraPerson();
    await this.sessionFor(userId);
    return userId;
  }

  /** One more session of theirs. */
  async sessionOf(role: string): Promise<string> {
    const userId = await this.one(
      `SELECT id FROM "user" WHERE site_id = $1 AND role = $2 AND retired_at IS NULL LIMIT 1`,
      role,
    );
    return this.sessionFor(userId);
  }

  private async sessionFor(userId: string): Promise<string> {
    const id = randomUUID();
    await this.db.query(
      `INSERT INTO session (id, token, "userId", "expiresAt", "createdAt", "updatedAt")
       VALUES ($1, $1, $2, now() + interval '1 hour', now(), now())`,
      [id, userId],
    );
    return id;
  }

  /** The hidden fields of the first form on a page that has one of that name. */
  async formOn(path: string, name: string): Promise<Record<string, string>> {
    const html = await this.html(path);
    const form = html.split('<form').find((part) => part.includes(`name="${name}"`)) ?? missing(name);
    const fields: Record<string, string> = {};
    for (const [, tag = ''] of (form.split('</form>')[0] ?? '').matchAll(/<input([^>]*)>/g)) {
      const key = /name="([^"]*)"/.exec(tag)?.[1];
      const value = /value="([^"]*)"/.exec(tag)?.[1] ?? '';
      if (key && !key.startsWith('$') && tag.includes('hidden')) fields[key] = unescaped(value);
    }
    return fields;
  }
}

const unescaped = (text: string) =>
  text
    .replaceAll('&quot;', '"')
    .replaceAll('&#x27;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');

function missing(name: string): never {
  throw new Error(`the walk knows no ${name}`);
}
