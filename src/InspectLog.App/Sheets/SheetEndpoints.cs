using InspectLog.App.Ui;
using InspectLog.Checks;
using InspectLog.Journal;

namespace InspectLog.App.Sheets;

/// <summary>The check sheets, to read.</summary>
public static class SheetEndpoints
{
    public static void MapSheets(this IEndpointRouteBuilder app)
    {
        app.MapGet(Links.Sheets, (Garage garage) =>
            Page.Of<SheetsPage, SheetsView>(new SheetsView(BuiltInSheets.All, garage.Problems))).WithName("sheets");
        app.MapGet(Links.Sheets + "/{id}", (Garage garage, string id) => BuiltInSheets.Find(id) is { } sheet
            ? Page.Of<SheetPage, SheetView>(new SheetView(sheet, garage.Problems))
            : Results.NotFound()).WithName("sheet");
    }
}
