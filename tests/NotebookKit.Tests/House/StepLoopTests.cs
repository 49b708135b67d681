using System.Reflection;
using System.Runtime.CompilerServices;

namespace NotebookKit.Tests.House;

/// <summary>What step loops run on is called where it stands.</summary>
public class StepLoopTests
{
    /// <summary>
    /// The compiler can't know that a method of a type parameter leaves its structure alone. Where the field may not be written, it
    /// therefore copies the whole structure before every call: that was a fifth of a flight's time.
    /// </summary>
    [Fact]
    public void No_laws_given_by_type_are_held_where_every_call_would_copy_them()
    {
        var held = Repository.Library.GetTypes()
            .SelectMany(t => t.GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly))
            .Where(f => HoldsLaws(f.FieldType)).ToList();
        Assert.NotEmpty(held);
        Violations.None(
            from field in held
            where field.IsInitOnly
            select $"{field.DeclaringType!.Name}.{field.Name} is read-only: make the structure an ordinary one");
    }

    private static bool HoldsLaws(Type type) => type.IsGenericParameter
        ? type.GetGenericParameterConstraints().Any(c => c.IsInterface && c.Assembly == Repository.Library)
        : type.IsValueType && type.Assembly == Repository.Library && !type.IsDefined(typeof(IsReadOnlyAttribute))
            && type.GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public).Any(f => HoldsLaws(f.FieldType));
}
