using InspectLog.Journal.Storage;

namespace InspectLog.Journal;

/// <summary>A journal that can be held still while its file is written anew.</summary>
internal interface IHeldJournal
{
    /// <summary>Which write to it failed; null while none did.</summary>
    GarageProblem? FailedWrite { get; }

    /// <summary>Closes it to writing.</summary>
    WriteLatch Latch { get; }

    /// <summary>Waits until nothing is appended, and lets nothing be until it is released, by the same thread.</summary>
    void Hold();

    /// <summary>Lets appends go on.</summary>
    void Release();

    /// <summary>Reads its file again, which was written anew.</summary>
    void ReadAnew();

    /// <summary>The bytes of its file.</summary>
    byte[] Bytes();
}
