/** Ids of the pictures in a stored job, whatever its version. */
export function photoIdsIn(raw: unknown): readonly string[] {
  const photos = typeof raw === 'object' && raw !== null && 'photos' in raw ? raw.photos : null;
  if (!Array.isArray(photos)) return [];
  return (photos as readonly unknown[]).flatMap((photo) =>
    typeof photo === 'object' && photo !== null && 'id' in photo && typeof photo.id === 'string'
      ? [photo.id]
      : [],
  );
}
