/**
 * Settings held against the limits: what is exceeded, where that begins, how grave it is, and one
 * verdict for the whole.
 *
 * <p>The entry class is {@link brakewright.review.Review}. A finding is a fact with its numbers;
 * the words for it are the caller's. Signal words rank findings as in ANSI Z535.6 and ISO 3864-2
 * usage. The verdict is {@code outside-limits} when a rating or trip is exceeded at every charge
 * state in use or a static limit is exceeded, {@code conditional} when that depends on the charge
 * state, the speed or the temperature, and {@code within-limits} otherwise.
 *
 * <pre>{@code
 * Limits limits = Limits.of(board);
 * Review review = Review.of(board, limits, Operation.of(board, limits));
 * Verdict verdict = review.verdict();
 * for (Finding finding : review.findings()) {
 *     System.out.println(finding.signal() + " " + finding.topic());
 * }
 * }</pre>
 */
@NullMarked
package brakewright.review;

import org.jspecify.annotations.NullMarked;
