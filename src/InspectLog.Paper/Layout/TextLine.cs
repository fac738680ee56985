using InspectLog.Paper.Blocks;

namespace InspectLog.Paper.Layout;

/// <summary>A line of text as it stands on paper.</summary>
/// <param name="Runs">Its parts, in the order in which they are read.</param>
/// <param name="Width">Its width without the space at its end, points.</param>
internal sealed record TextLine(IReadOnlyList<Run> Runs, double Width);

/// <summary>A part of a line in one look.</summary>
/// <param name="X">Where it begins, points from the line's left end.</param>
/// <param name="Words">The text; empty for a mark.</param>
/// <param name="Look">How it looks.</param>
/// <param name="Mark">A small drawing in place of a text; null for none.</param>
internal sealed record Run(double X, string Words, RunLook Look, VectorDrawing? Mark = null);

/// <summary>How a text looks.</summary>
/// <param name="Size">Size of its letters, points.</param>
/// <param name="IsBold">Whether it is bold.</param>
/// <param name="Ink">Its colour.</param>
internal readonly record struct RunLook(double Size, bool IsBold, Ink Ink);
