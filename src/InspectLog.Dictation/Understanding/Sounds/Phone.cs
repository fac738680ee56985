namespace InspectLog.Dictation.Understanding.Sounds;

/// <summary>A sound of English, by its ARPABET name, which the pronouncing dictionary is written in. The vowels come
/// first.</summary>
internal enum Phone : byte
{
    AA, AE, AH, AO, AW, AY, EH, ER, EY, IH, IY, OW, OY, UH, UW,
    B, CH, D, DH, F, G, HH, JH, K, L, M, N, NG, P, R, S, SH, T, TH, V, W, Y, Z, ZH,
}

/// <summary>Reads phones.</summary>
internal static class Phones
{
    public const int Count = (int)Phone.ZH + 1;

    public static bool IsVowel(Phone phone) => phone <= Phone.UW;

    /// <summary>The phones of a pronunciation such as "W IY K".</summary>
    /// <exception cref="ArgumentException">A name is none of the 39.</exception>
    public static Phone[] Parse(string names) =>
        [.. names.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Enum.Parse<Phone>)];
}
