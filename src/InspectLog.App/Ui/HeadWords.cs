namespace InspectLog.App.Ui;

/// <summary>What the head of a record is called, on paper and by <c>verify</c> alike.</summary>
internal static class HeadWords
{
    /// <summary>Its name.</summary>
    /// <param name="isDamaged">Whether lines of the journal are damaged, so that they are not in it.</param>
    public static string Of(bool isDamaged) => isDamaged ? "Head of the record as far as it can be read" : "Head of the record";
}
