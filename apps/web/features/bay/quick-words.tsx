import { Button } from '@/components/button';
import { Stack } from '@/components/stack';

/** Words that are often wanted, for a single tap. */
export function QuickWords({
  words,
  onChoose,
}: {
  words: readonly string[];
  onChoose: (words: string) => void;
}) {
  return (
    <Stack gap="small" across>
      {words.map((each) => (
        <Button key={each} onClick={() => onChoose(each)}>
          {each}
        </Button>
      ))}
    </Stack>
  );
}
