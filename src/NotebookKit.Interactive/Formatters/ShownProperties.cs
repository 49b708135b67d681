using System.Collections.Concurrent;
using System.Reflection;
using NotebookKit.Provenance;

namespace NotebookKit.Interactive.Formatters;

/// <summary>The properties that say what a design is made of.</summary>
internal static class ShownProperties
{
    private static readonly ConcurrentDictionary<Type, IReadOnlyList<PropertyInfo>> Known = [];

    /// <summary>Those of a type, in the order they are declared. Its name is shown otherwise.</summary>
    public static IReadOnlyList<PropertyInfo> Of(Type type) => Known.GetOrAdd(type, t =>
    [
        .. t.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0 && p.GetMethod is { IsPublic: true } && p.Name != "Name")
            .Where(p => !typeof(Delegate).IsAssignableFrom(p.PropertyType)),
    ]);

    /// <summary>The value of one; none where the design refuses to say it.</summary>
    public static object? Value(PropertyInfo property, object design)
    {
        try
        {
            return property.GetValue(design);
        }
        catch (TargetInvocationException e) when (e.InnerException is InvalidDesignException or OutOfRangeException)
        {
            return null;
        }
    }
}
