import { printJson } from '../../render/json.ts';
import { table } from '../../render/table.ts';
import { everydayNames, SOURCE_NOTES, WOODS, type WoodSource } from '../../wood/species.ts';
import { terminalLines } from '../report/jointText.ts';

/** Prints every wood that is known by name, with what else it is called and where its figures come from. */
export const seasonWoods = (json: boolean): void => {
  process.stdout.write(json ? printJson({ woods: WOODS.map(record) }) : `${text().join('\n')}\n`);
};

const record = (wood: (typeof WOODS)[number]) => ({
  ...wood,
  alsoCalled: everydayNames(wood),
  source: SOURCE_NOTES[wood.source],
});

const text = (): string[] => [...listFrom('handbook'), '', ...listFrom('memory')];

const listFrom = (source: WoodSource): string[] => [
  ...terminalLines(`Figures: ${SOURCE_NOTES[source]}.`),
  ...table(
    ['wood', 'also called'],
    WOODS.filter((wood) => wood.source === source).map((wood) => [wood.name, everydayNames(wood).join('; ')]),
    [false, false],
  ),
];
