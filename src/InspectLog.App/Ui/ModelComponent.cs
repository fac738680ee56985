using Microsoft.AspNetCore.Components;

namespace InspectLog.App.Ui;

/// <summary>A page or fragment that shows one model.</summary>
public abstract class ModelComponent<TModel> : ComponentBase
{
    /// <summary>What it shows.</summary>
    [Parameter]
    [EditorRequired]
    public TModel Model { get; set; } = default!;
}
