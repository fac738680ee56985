using System.Globalization;

namespace InspectLog.App.Ui;

/// <summary>Ids for the forms of one page: what is random in them stands once for all of them, so that a page of many forms
/// stays small on its way.</summary>
public sealed class CaptureIds
{
    private readonly string _page = Guid.NewGuid().ToString("N");
    private int _forms;

    /// <summary>An id that no other form has, on this page or any other.</summary>
    public string Next() => string.Create(CultureInfo.InvariantCulture, $"{_page}-{++_forms}");
}
