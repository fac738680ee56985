namespace InspectLog.Checks;

/// <summary>How soon something is to be seen to.</summary>
public enum Urgency
{
    /// <summary>Before the vehicle is used again.</summary>
    Now,

    /// <summary>At the next work on it.</summary>
    Soon,

    /// <summary>When there is time.</summary>
    Later,
}
