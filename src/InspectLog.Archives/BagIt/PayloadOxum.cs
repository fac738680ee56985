using System.Globalization;

namespace InspectLog.Archives.BagIt;

/// <summary>How large a bag's payload is: so many octets in so many files. A quick look before anything is read.</summary>
/// <param name="Octets">Bytes of all payload files together.</param>
/// <param name="Streams">How many they are.</param>
public readonly record struct PayloadOxum(long Octets, int Streams)
{
    /// <summary>Its label.</summary>
    public const string Label = "Payload-Oxum";

    /// <summary>Reads one; null where it is none.</summary>
    public static PayloadOxum? Read(string text) =>
        text.Split('.') is [var octets, var streams]
        && long.TryParse(octets, NumberStyles.None, CultureInfo.InvariantCulture, out var bytes)
        && int.TryParse(streams, NumberStyles.None, CultureInfo.InvariantCulture, out var files)
            ? new(bytes, files)
            : null;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Octets}.{Streams}");
}
