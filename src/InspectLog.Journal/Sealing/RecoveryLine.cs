using System.Globalization;

namespace InspectLog.Journal.Sealing;

/// <summary>One line of a recovery sheet: four bytes as ten decimal digits, and two check digits that also stand for the
/// line's number, in groups of four.</summary>
/// <remarks>The check is that of ISO 7064, MOD 97-10, over the line's number and the ten digits: it finds every wrong digit,
/// every two that were swapped, and every line that was typed in the place of another.</remarks>
internal static class RecoveryLine
{
    /// <summary>How many digits a line has.</summary>
    public const int Digits = 12;

    /// <summary>How many bytes a line stands for.</summary>
    public const int Bytes = sizeof(uint);

    private const int CheckDigits = 2;
    private const ulong Modulus = 97;
    private const ulong Right = 1;
    private const int Group = 4;

    /// <summary>A line.</summary>
    /// <param name="number">Its number, from 1 to 9.</param>
    /// <param name="value">What it says.</param>
    public static string Write(int number, uint value)
    {
        var digits = value.ToString("D10", CultureInfo.InvariantCulture);
        var check = Modulus + Right - (ulong.Parse($"{number}{digits}00", CultureInfo.InvariantCulture) % Modulus);
        return string.Join(' ', $"{digits}{check:D2}".Chunk(Group).Select(group => new string(group)));
    }

    /// <summary>What a line says; null where its digits do not fit together.</summary>
    /// <param name="number">Its number, from 1 to 9.</param>
    /// <param name="digits">Its twelve digits.</param>
    public static uint? Read(int number, string digits) =>
        digits.Length == Digits
        && digits.All(char.IsAsciiDigit)
        && ulong.Parse($"{number}{digits}", CultureInfo.InvariantCulture) % Modulus == Right
        && uint.TryParse(digits[..^CheckDigits], NumberStyles.None, CultureInfo.InvariantCulture, out var value)
            ? value
            : null;
}
