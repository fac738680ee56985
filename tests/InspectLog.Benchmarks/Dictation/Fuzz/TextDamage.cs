namespace InspectLog.Benchmarks.Dictation.Fuzz;

/// <summary>Sentences with words lost, doubled, exchanged, run together, and letters changed.</summary>
internal static class TextDamage
{
    private const double MostOfWords = 0.4;

    /// <summary>The sentences one after the other, damaged; the same for the same chance.</summary>
    public static string Of(string[] sentences, int chance)
    {
        var random = new Random(chance);
        var words = string.Join(' ', sentences).Split(' ');
        var share = random.NextDouble() * MostOfWords;
        return string.Join(' ', words.SelectMany(word => random.NextDouble() < share ? Damaged(word, words, random) : [word]));
    }

    private static IEnumerable<string> Damaged(string word, string[] others, Random random) => random.Next(7) switch
    {
        0 => [],
        1 => [word, word],
        2 => [others[random.Next(others.Length)]],
        3 => [word + others[random.Next(others.Length)]],
        4 => [word.ToUpperInvariant()],
        5 when word.Length > 1 => [word[..(word.Length / 2)], word[(word.Length / 2)..]],
        _ => [WithLetterChanged(word, random)],
    };

    private static string WithLetterChanged(string word, Random random)
    {
        var at = random.Next(word.Length + 1);
        var letter = (char)random.Next('a', 'z' + 1);
        return at == word.Length ? word + letter : $"{word[..at]}{letter}{word[(at + 1)..]}";
    }
}
