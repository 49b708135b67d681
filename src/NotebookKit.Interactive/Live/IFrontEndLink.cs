using System.Text.Json.Nodes;

namespace NotebookKit.Interactive.Live;

/// <summary>Controls in a notebook front-end that speaks the open widget messages, as seen from a session.</summary>
public interface IFrontEndLink
{
    /// <summary>Makes a control.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="state">Its state: the names of its model and view, and its values.</param>
    /// <param name="changed">Told the values the reader changed, or what a pressed button sends; none where the reader can't change
    /// anything.</param>
    void Open(string id, JsonObject state, Action<JsonObject>? changed);

    /// <summary>Changes a control.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="state">The values that change.</param>
    void Update(string id, JsonObject state);
}
