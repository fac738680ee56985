namespace InspectLog.Journal.Storage;

/// <summary>Which exceptions say that a disk did not do what it was asked to.</summary>
internal static class DiskFailure
{
    /// <summary>Whether one does. The runtime takes a file whose end cannot be asked for, for one that cannot seek, and says of
    /// it that it does not support that (10.0.12).</summary>
    public static bool Is(Exception cause) => cause is IOException or UnauthorizedAccessException or NotSupportedException;
}
