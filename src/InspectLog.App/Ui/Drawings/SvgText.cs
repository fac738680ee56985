using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace InspectLog.App.Ui.Drawings;

/// <summary>Numbers and text of drawings.</summary>
internal static class SvgText
{
    /// <summary>A position, to a tenth of a pixel.</summary>
    public static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>A text element. Built by hand because Razor keeps the tag name "text" for itself.</summary>
    public static RenderFragment Of(double x, double y, string anchor, string text) => builder =>
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", Number(x));
        builder.AddAttribute(2, "y", Number(y));
        builder.AddAttribute(3, "text-anchor", anchor);
        builder.AddContent(4, text);
        builder.CloseElement();
    };
}
