using System.Buffers.Binary;

namespace InspectLog.Journal.Sealing;

/// <summary>The secret of a key as digits to be printed, put away, and typed in again when the computer is gone: eight lines
/// for the secret and a ninth for the fingerprint of the key, by which the whole is checked.</summary>
public static class RecoverySheet
{
    /// <summary>How many lines it has.</summary>
    public const int Lines = SecretLines + 1;

    private const int SecretLines = Es256.NumberBytes / RecoveryLine.Bytes;

    /// <summary>The lines, each twelve digits in groups of four.</summary>
    public static IReadOnlyList<string> Write(SealKey key)
    {
        var secret = key.Secret();
        return
        [
            .. Enumerable.Range(0, SecretLines).Select(at => RecoveryLine.Write(
                at + 1, BinaryPrimitives.ReadUInt32BigEndian(secret.AsSpan(at * RecoveryLine.Bytes)))),
            RecoveryLine.Write(Lines, Beginning(key.Public)),
        ];
    }

    /// <summary>The key of a sheet that was typed in. Blanks, hyphens and line ends do not matter, and nor does where they are.
    /// </summary>
    /// <exception cref="SealKeyException">The sheet was not typed as it is printed. The message names the line.</exception>
    public static SealKey Read(string typed)
    {
        var digits = string.Concat(typed.Where(c => !char.IsWhiteSpace(c) && c is not ('-' or '.')));
        if (digits.FirstOrDefault(c => !char.IsAsciiDigit(c)) is not '\0' and var strange)
        {
            throw new SealKeyException($"A recovery sheet has digits only, and \"{strange}\" is none. Leave out the numbers of the lines and all words.");
        }

        var lines = digits.Chunk(RecoveryLine.Digits).Select(line => new string(line)).ToList();
        var values = lines.Select((line, at) => at < Lines ? RecoveryLine.Read(at + 1, line) : null).ToList();
        if (values.FindIndex(value => value is null) is >= 0 and < Lines and var wrong)
        {
            throw new SealKeyException($"Line {wrong + 1} is not as it is printed. Compare its digits with the sheet, and look whether one is missing or twice.");
        }

        return lines.Count == Lines
            ? Whole([.. values.Select(value => value!.Value)])
            : throw new SealKeyException($"There are {(lines.Count < Lines ? "fewer" : "more")} lines than the {Lines} of a sheet.");
    }

    private static SealKey Whole(uint[] values)
    {
        var secret = new byte[Es256.NumberBytes];
        for (var at = 0; at < SecretLines; at++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(secret.AsSpan(at * RecoveryLine.Bytes), values[at]);
        }

        var key = SealKey.OfSecret(secret);
        if (Beginning(key.Public) == values[SecretLines])
        {
            return key;
        }

        key.Dispose();
        throw new SealKeyException("Each line fits, but not the whole: more than one line was typed wrong, or lines of two sheets were mixed.");
    }

    private static uint Beginning(SealPublicKey key) => Convert.ToUInt32(key.Fingerprint[..(2 * RecoveryLine.Bytes)], 16);
}
