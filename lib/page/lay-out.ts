// A page as the writers may rely on it: sections in their fixed order, cautions first, figures numbered.

import { capital } from "../chart/axis-words.ts";
import { type Issue, invariant, placeText, type Severity } from "../issue.ts";
import type {
  Attachment,
  Block,
  ChartBlock,
  Page,
  PlainBlock,
  SectionRole,
  TableBlock,
  Text,
  TitleLine,
} from "./blocks.ts";
import { stemGiver } from "./file-name.ts";

/**
 * A table or chart with its place in the page, what it is called there ("3"; "A" where it is kept to the screen, so that
 * paper counts without a gap), and the stem of its file.
 */
interface Placed {
  readonly number: number;
  readonly label: string;
  readonly stem: string;
}
export type LaidTable = TableBlock & Placed;
export type LaidChart = ChartBlock & Placed;
export interface LaidFold {
  readonly kind: "fold";
  readonly summary: string;
  readonly blocks: readonly LaidBlock[];
  readonly screenOnly?: true;
  readonly ownSheet?: true;
}
export type LaidBlock = PlainBlock | LaidTable | LaidChart | LaidFold;

export interface LaidSection {
  /** Anchor, unlike that of any other section. */
  readonly id: string;
  readonly role: SectionRole;
  readonly title: string;
  readonly blocks: readonly LaidBlock[];
}

export interface LaidPage {
  readonly title: string;
  readonly question: Text;
  readonly answer: readonly Text[];
  readonly sections: readonly LaidSection[];
  readonly sources: readonly string[];
  readonly colophon: readonly string[];
  /** Of the page and of its blocks, each once, errors first. */
  readonly issues: readonly Issue[];
  /** The errors among them, told after the answer; the others stand at the end. */
  readonly errors: readonly Issue[];
  readonly others: readonly Issue[];
  readonly invented: boolean;
  readonly figures: Page["figures"];
  readonly attachments: readonly Attachment[];
  readonly titleBlock: readonly TitleLine[];
  readonly numberedSources: boolean;
  /** The hazards of the page's cautions, a sentence each, for the line that stands before the first figure. */
  readonly hazards: readonly string[];
}

const ROLES: readonly SectionRole[] = ["cautions", "data", "result", "findings", "next"];
const SEVERITIES: readonly Severity[] = ["error", "warning", "note"];

/**
 * The page in its fixed order: cautions, data, result, findings, next. Within a section cautions come before
 * all else, also those that stood in a fold. Empty blocks and sections are left out.
 * Throws Misuse for a role that there is not.
 */
export function layOut(page: Page): LaidPage {
  for (const { role, title } of page.sections) {
    invariant(
      ROLES.includes(role),
      `section "${title}" has the role "${role}"; it must be one of ${ROLES.join(", ")}`,
    );
  }
  const place = placer();
  const id = stemGiver();
  const shared = sharedDeferral(page);
  const unsaid = saidOnce();
  const sections = ROLES.flatMap((role) => page.sections.filter((section) => section.role === role)).flatMap(
    ({ role, title, blocks }) => {
      const laid = deferralOnce(cautionsFirst(blocks).filter(holdsSomething).filter(unsaid), shared).map(
        place,
      );
      return laid.length === 0 ? [] : [{ id: id(role), role, title, blocks: laid }];
    },
  );
  const issues = sortedIssues([
    ...page.issues,
    ...page.sections.flatMap((section) => issuesIn(section.blocks)),
  ]);
  return {
    title: page.title,
    question: page.question,
    answer: page.answer,
    sections,
    sources: page.sources.map(capital),
    colophon: page.colophon,
    issues,
    errors: issues.filter(({ severity }) => severity === "error"),
    others: issues.filter(({ severity }) => severity !== "error"),
    invented: page.invented === true,
    figures: page.figures,
    attachments: page.attachments ?? [],
    titleBlock: page.titleBlock ?? [],
    numberedSources: page.numberedSources === true,
    hazards: sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === "caution" ? [block.caution.text] : [])),
    ),
  };
}

/** Every block, those within folds after their fold. */
export function everyBlock(blocks: readonly LaidBlock[]): LaidBlock[] {
  return blocks.flatMap((block) => (block.kind === "fold" ? [block, ...everyBlock(block.blocks)] : [block]));
}

/** Errors first, then warnings, then notes; otherwise in the order found; each once. */
function sortedIssues(issues: readonly Issue[]): Issue[] {
  const once = new Map(
    issues.map((issue) => [`${issue.code}\n${placeText(issue.place)}\n${issue.message}`, issue]),
  );
  return SEVERITIES.flatMap((severity) => [...once.values()].filter((issue) => issue.severity === severity));
}

function cautionsFirst(blocks: readonly Block[]): Block[] {
  const cautions: Block[] = [];
  const take = (within: readonly Block[]): Block[] =>
    within.flatMap((block): Block[] => {
      if (block.kind === "fold") return [{ ...block, blocks: take(block.blocks) }];
      if (block.kind !== "caution") return [block];
      cautions.push(block);
      return [];
    });
  const rest = take(blocks);
  return [...cautions, ...rest];
}

/** False for an explanation that the page has given already. */
function saidOnce(): (block: Block) => boolean {
  const said = new Set<string>();
  return (block) => {
    if (block.kind !== "prose" || !block.once) return true;
    const text = JSON.stringify(block.text);
    if (said.has(text)) return false;
    said.add(text);
    return true;
  };
}

/** What several cautions of the page defer to in the same words. */
function sharedDeferral({ sections }: Page): string | undefined {
  const counts = new Map<string, number>();
  for (const { blocks } of sections) {
    for (const block of cautionsFirst(blocks)) {
      if (block.kind !== "caution") continue;
      const { defers } = block.caution;
      counts.set(defers, (counts.get(defers) ?? 0) + 1);
    }
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  return most && most[1] > 1 ? most[0] : undefined;
}

/** The shared words once, before the section's first caution that has them; a caution with its own keeps them. */
function deferralOnce(blocks: readonly Block[], shared: string | undefined): Block[] {
  const has = (block: Block): boolean => block.kind === "caution" && block.caution.defers === shared;
  const first = blocks.find(has);
  if (shared === undefined || !first) return [...blocks];
  return blocks.flatMap((block): Block[] => {
    const laid = has(block) ? { ...block, deferralSaid: true } : block;
    return block === first ? [{ kind: "prose", text: shared }, laid as Block] : [laid as Block];
  });
}

function holdsSomething(block: Block): boolean {
  switch (block.kind) {
    case "prose":
    case "lines":
      return block.text.length > 0;
    case "list":
      return block.items.length > 0;
    case "figures":
      return block.figures.length > 0;
    case "issues":
      return block.issues.length > 0;
    case "table":
      return block.rows.length + (block.foot?.length ?? 0) > 0;
    case "fold":
      return block.blocks.some(holdsSomething);
    default:
      return true;
  }
}

function placer(): (block: Block) => LaidBlock {
  const stem = stemGiver();
  const [tables, charts] = [counter(), counter()];
  const placeIn =
    (screenOnly: boolean) =>
    (block: Block): LaidBlock => {
      switch (block.kind) {
        case "table":
          return { ...block, ...tables(screenOnly), stem: stem(block.name) };
        case "chart":
          return {
            ...block,
            ...charts(screenOnly || block.screenOnly === true),
            stem: stem(block.chart.name),
          };
        case "fold": {
          const inside = placeIn(screenOnly || block.screenOnly === true);
          return { ...block, blocks: block.blocks.filter(holdsSomething).map(inside) };
        }
        default:
          return block;
      }
    };
  return placeIn(false);
}

/** Counts from 1; what paper has is called by figures, what the screen alone has by letters. */
function counter(): (screenOnly: boolean) => Pick<Placed, "number" | "label"> {
  let [paper, screen] = [0, 0];
  return (screenOnly) => {
    const label = screenOnly ? letter(screen++) : String(++paper);
    return { number: paper + screen, label };
  };
}

/** "A" to "Z", then "AA". */
function letter(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : letter(Math.floor(place / 26) - 1) + last;
}

function issuesIn(blocks: readonly Block[]): Issue[] {
  return blocks.flatMap((block) => {
    if (block.kind === "issues") return block.issues;
    return block.kind === "fold" ? issuesIn(block.blocks) : [];
  });
}
