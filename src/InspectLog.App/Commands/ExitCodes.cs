namespace InspectLog.App.Commands;

/// <summary>How a verb ended. Listed in the help of every verb and in the README.</summary>
internal static class ExitCodes
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and the answer is no: the record is not intact.</summary>
    public const int No = 1;

    /// <summary>The command line or a file it names cannot be used as it is.</summary>
    public const int BadInput = 2;

    /// <summary>Cannot be done here and now: no speech model, a folder in use, a full disk, a port taken.</summary>
    public const int Cannot = 3;

    /// <summary>Stopped from outside before the end, as a shell counts an interrupt.</summary>
    public const int Stopped = 130;

    /// <summary>The same, in words.</summary>
    public static readonly IReadOnlyList<(int Code, string Meaning)> All =
    [
        (Done, "done"),
        (No, "the answer is no: the record is not intact, or was not taken in"),
        (BadInput, "the command line or a file it names cannot be used as it is"),
        (Cannot, "not possible now: speech model missing, data folder in use, disk full, port taken"),
    ];
}
