/**
 * Fills the place that a page keeps for what needs scripts. That is large, so it is loaded after the page has been drawn.
 * @param failed what stands there where it cannot be had
 */
export async function fillPlace(
  id: string,
  fill: (place: HTMLElement) => Promise<void>,
  failed: string,
): Promise<void> {
  const place = document.getElementById(id)!;
  try {
    await fill(place);
  } catch (error) {
    place.textContent = failed;
    throw error;
  }
}
