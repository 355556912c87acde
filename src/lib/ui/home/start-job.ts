/** The bench brings the procedure and the planner: it is fetched when a job begins, not when the page opens. */
export async function startFrom(draft?: Readonly<Record<string, string>>, copyOf?: string): Promise<string> {
  const { startJob } = await import('$lib/session/open.ts');
  return startJob(draft, copyOf);
}
