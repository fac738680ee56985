using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace InspectLog.Journal.Record;

/// <summary>The head of a record: one value for a journal up to an entry and for what is withheld of it, to be printed and
/// compared later. FORMAT.md has the recipe.</summary>
public static class RecordHead
{
    /// <summary>The value.</summary>
    /// <param name="count">How many entries the journal has.</param>
    /// <param name="lastHash">Hash of the last of them, lower-case hex.</param>
    /// <param name="withheld">Sequences of those whose bodies are withheld, rising.</param>
    /// <returns>64 lower-case hex digits.</returns>
    public static string Of(long count, string lastHash, IEnumerable<long> withheld)
    {
        var list = string.Join(',', withheld.Select(sequence => sequence.ToString(CultureInfo.InvariantCulture)));
        return Of(count, lastHash, list);
    }

    /// <summary>The value, of a list of sequences that is spelled already.</summary>
    internal static string Of(long count, string lastHash, string withheld) => Convert.ToHexStringLower(SHA256.HashData(
        Encoding.UTF8.GetBytes(string.Create(
            CultureInfo.InvariantCulture, $"{{\"count\":{count},\"head\":\"{lastHash}\",\"withheld\":[{withheld}]}}"))));
}
