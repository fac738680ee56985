namespace InspectLog.Photos.Worker;

/// <summary>How to start a worker, which runs <see cref="PhotoWorkerServer"/>.</summary>
/// <param name="FileName">The executable.</param>
/// <param name="Arguments">Its arguments, unquoted.</param>
public sealed record PhotoWorkerCommand(string FileName, params IReadOnlyList<string> Arguments);
