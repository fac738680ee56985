namespace InspectLog.Benchmarks.Dictation.Fuzz;

/// <summary>A generated text.</summary>
/// <param name="Kind">What it was made of.</param>
/// <param name="Text">The text, of no more than <see cref="FuzzTexts.Longest"/> characters.</param>
internal readonly record struct FuzzText(string Kind, string Text);
