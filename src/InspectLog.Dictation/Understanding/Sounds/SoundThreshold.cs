namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>How far a phrase may be from what was heard and still be taken for it, where the words around it expect such a
/// phrase. Chosen on the look part of the corpus and misheard forms of it, at four steps from 0.14 to 0.22: wider than
/// this, utterances without a finding begin to give some, and no more of the misheard ones are found. Short words
/// have many neighbours, so they must be nearer.</summary>
internal static class SoundThreshold
{
    private const double Short = 0.17;
    private const double Long = 0.2;
    private const int ShortLength = 3;
    private const int LongLength = 5;

    /// <summary>The greatest distance per sound.</summary>
    /// <param name="length">Sounds of the longer of the two.</param>
    public static double For(int length) => length <= ShortLength ? Short
        : length >= LongLength ? Long
        : Short + (Long - Short) * (length - ShortLength) / (LongLength - ShortLength);
}
