namespace InspectLog.Dictation.Understanding.Lattice;

/// <summary>Which words were met in notes with findings, and so need not put a finding in doubt.</summary>
internal abstract class WordFamiliarity
{
    /// <summary>Whether a word was met.</summary>
    public abstract bool IsFamiliar(int word);
}
