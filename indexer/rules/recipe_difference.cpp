#include "indexer/rules/recipe_difference.h"

#include <algorithm>

#include "indexer/record/recipe/fields.h"
#include "indexer/record/recipe_text.h"
#include "indexer/rules/step_pairs.h"

namespace quarterturn {
namespace {

// The field of one name in a recipe, by its type.
template <class Value>
struct FieldOf {
    std::string_view wanted;
    const Value* found = nullptr;

    template <class Other>
    void always(std::string_view name, const Other& value) {
        if constexpr (std::same_as<Other, Value>) {
            if (name == wanted) found = &value;
        }
    }
    template <class Other>
    void if_any(std::string_view name, const Other& value) {
        always(name, value);
    }
};

template <class Value>
const Value& field_of(const Recipe& recipe, std::string_view name) {
    FieldOf<Value> field{name};
    visit_fields(field, recipe);
    return *field.found;
}

// Visits each field of a recipe but its steps.
template <class Work>
class EachField {
  public:
    explicit EachField(Work work) : work_(std::move(work)) {}

    template <class Value>
    void always(std::string_view name, Value& value) {
        if (name != "build") work_(name, value);
    }
    template <class Value>
    void if_any(std::string_view name, Value& value) {
        always(name, value);
    }

  private:
    Work work_;
};

// Copies the field of this name.
void copy_field(const Recipe& from, std::string_view wanted, Recipe& to) {
    EachField copy([&](std::string_view name, auto& value) {
        if (name == wanted) value = field_of<std::remove_reference_t<decltype(value)>>(from, name);
    });
    visit_fields(copy, to);
}

std::vector<StepChange> step_changes(const std::vector<Step>& was, const std::vector<Step>& is) {
    std::vector<StepChange> changes;
    std::size_t old_done = 0;
    std::size_t new_done = 0;
    const auto until = [&](std::size_t old_end, std::size_t new_end) {
        for (; old_done < old_end; ++old_done) {
            changes.push_back({StepEdit::removed, old_done, std::nullopt, {}});
        }
        for (; new_done < new_end; ++new_done) {
            changes.push_back({StepEdit::added, std::nullopt, new_done, is[new_done]});
        }
    };
    for (const auto& [before, after] : step_pairs(was, is)) {
        until(before, after);
        const bool same = was[before] == is[after];
        changes.push_back(
            {same ? StepEdit::kept : StepEdit::changed, before, after, same ? Step{} : is[after]});
        old_done = before + 1;
        new_done = after + 1;
    }
    until(was.size(), is.size());
    return changes;
}

std::vector<std::string> words_of(const Recipe& recipe, std::string_view field) {
    Recipe only;
    copy_field(recipe, field, only);
    std::vector<std::string> lines;
    for (RecipePart& part : recipe_parts(only)) {
        lines.insert(lines.end(), part.lines.begin(), part.lines.end());
    }
    return lines;
}

std::string heading_of(std::string_view field, const Recipe& was, const Recipe& is) {
    for (const Recipe* recipe : {&is, &was}) {
        Recipe only;
        copy_field(*recipe, field, only);
        const auto parts = recipe_parts(only);
        if (!parts.empty()) return parts.front().heading;
    }
    return std::string(field);
}

std::string step_heading(const StepChange& change) {
    const auto number = [](std::size_t place) { return std::to_string(place + 1); };
    switch (change.edit) {
        case StepEdit::added:
            return "Step " + number(*change.is) + ", new";
        case StepEdit::removed:
            return "Step " + number(*change.was) + ", left out";
        case StepEdit::kept:
        case StepEdit::changed:
            break;
    }
    if (change.was == change.is) return "Step " + number(*change.is);
    return "Step " + number(*change.is) + ", before step " + number(*change.was);
}

}  // namespace

RecipeDifference recipe_difference(const Recipe& was, const Recipe& is) {
    RecipeDifference difference;
    EachField compare([&](std::string_view name, const auto& value) {
        if (value == field_of<std::remove_cvref_t<decltype(value)>>(was, name)) return;
        difference.fields.emplace_back(name);
    });
    visit_fields(compare, is);
    for (const std::string& name : difference.fields) copy_field(is, name, difference.now);
    if (was.build != is.build) difference.steps = step_changes(was.build, is.build);
    return difference;
}

Recipe with_difference(const Recipe& first, const RecipeDifference& difference) {
    Recipe second = first;
    for (const std::string& name : difference.fields) copy_field(difference.now, name, second);
    if (difference.steps.empty()) return second;
    second.build.clear();
    for (const StepChange& change : difference.steps) {
        if (change.edit == StepEdit::removed) continue;
        const bool kept = change.edit == StepEdit::kept;
        if (kept && *change.was >= first.build.size()) continue;
        second.build.push_back(kept ? first.build[*change.was] : change.step);
    }
    return second;
}

std::vector<ToldChange> told_changes(const Recipe& was, const RecipeDifference& difference) {
    std::vector<ToldChange> told;
    for (const std::string& field : difference.fields) {
        told.push_back({heading_of(field, was, difference.now), words_of(was, field),
                        words_of(difference.now, field)});
    }
    for (const StepChange& change : difference.steps) {
        if (change.edit == StepEdit::kept) continue;
        ToldChange& step = told.emplace_back(ToldChange{step_heading(change), {}, {}});
        if (change.was && *change.was < was.build.size()) {
            step.was.push_back(step_text(was.build[*change.was]));
        }
        if (change.is) step.is.push_back(step_text(change.step));
    }
    return told;
}

}  // namespace quarterturn
