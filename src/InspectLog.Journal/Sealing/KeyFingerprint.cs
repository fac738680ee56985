namespace InspectLog.Journal.Sealing;

/// <summary>Fingerprints of keys as people read and type them.</summary>
public static class KeyFingerprint
{
    /// <summary>How many hex digits a short fingerprint has: 128 bits, which nobody can meet with another key.</summary>
    public const int ShortDigits = 32;

    private const int LongDigits = 64;
    private const int Group = 4;

    /// <summary>The short fingerprint of a key as it is printed, in groups of four: <c>9f86 d081 884c 7d65 9a2f eaa0 c55a d015</c>.</summary>
    public static string Printed(SealPublicKey key) => Grouped(key.Fingerprint[..ShortDigits]);

    /// <summary>Digits in groups of four.</summary>
    public static string Grouped(string digits) => string.Join(' ', digits.Chunk(Group).Select(group => new string(group)));

    /// <summary>A fingerprint as it was typed or scanned, without blanks, colons and hyphens, in lower case; null where it is
    /// none: too short, too long, or with other letters in it.</summary>
    public static string? Read(string typed)
    {
        var digits = string.Concat(typed.Where(c => !char.IsWhiteSpace(c) && c is not (':' or '-'))).ToLowerInvariant();
        return digits.Length is >= ShortDigits and <= LongDigits && digits.All(char.IsAsciiHexDigitLower) ? digits : null;
    }

    /// <summary>Whether a fingerprint that was read is a key's, whole or from its beginning.</summary>
    public static bool Is(SealPublicKey key, string read) => key.Fingerprint.StartsWith(read, StringComparison.Ordinal);
}
