namespace InspectLog.Dictation.Control;

/// <summary>What can be asked for by voice while hands-free listening is on.</summary>
public enum ControlWord
{
    /// <summary>Confirm what was understood last: "confirm that".</summary>
    Confirm,

    /// <summary>Drop what was understood last: "drop that".</summary>
    Drop,

    /// <summary>Take back the last confirmation: "take that back".</summary>
    TakeBack,

    /// <summary>Open the next check: "next check".</summary>
    NextCheck,

    /// <summary>Say the last answer again: "repeat that".</summary>
    Repeat,

    /// <summary>Stop listening: "stop listening".</summary>
    Stop,
}
