#include "indexer/rules/compared_parts.h"

#include <algorithm>
#include <set>

#include "indexer/record/recipe_text.h"
#include "indexer/rules/recipe_difference.h"

namespace quarterturn {
namespace {

const char* const build_heading = "Build";
const char* const drawing_heading = "Head plan";

// What is not told in words.
const char* const shown_elsewhere = "(another photo, or another place on the head)";

std::vector<std::string> lines_under(const std::vector<RecipePart>& parts,
                                     const std::string& heading) {
    const auto found = std::find_if(parts.begin(), parts.end(), [&](const RecipePart& part) {
        return part.heading == heading;
    });
    return found == parts.end() ? std::vector<std::string>() : found->lines;
}

class ComparedRecipes {
  public:
    ComparedRecipes(const Recipe& was, const Recipe& is)
        : was_(was), is_(is), difference_(recipe_difference(was, is)) {
        for (const ToldChange& told : told_changes(was, difference_)) changed_.insert(told.what);
    }

    std::vector<ComparedPart> parts() {
        const auto before = recipe_parts(was_);
        const auto after = recipe_parts(is_);
        for (const std::string& heading : recipe_headings()) {
            const auto was = lines_under(before, heading);
            const auto is = lines_under(after, heading);
            if (!was.empty() || !is.empty()) add(heading, was, is);
        }
        return std::move(parts_);
    }

  private:
    void add(const std::string& heading, const std::vector<std::string>& was,
             const std::vector<std::string>& is) {
        if (heading == build_heading && !difference_.steps.empty()) return add_steps();
        ComparedPart& part = parts_.emplace_back(ComparedPart{PartEdit::same, heading, was, is});
        part.drawing = heading == drawing_heading;
        if (was.empty()) {
            part.edit = PartEdit::added;
        } else if (is.empty()) {
            part.edit = PartEdit::removed;
        } else if (changed_.contains(heading)) {
            set_changed(part);
        }
    }

    void set_changed(ComparedPart& part) const {
        part.edit = PartEdit::changed;
        if (part.was == part.is && !part.drawing) part.is.emplace_back(shown_elsewhere);
    }

    void add_steps() {
        for (const StepChange& change : difference_.steps) {
            RecipeDifference only;
            only.steps = {change};
            const auto told = told_changes(was_, only);
            if (told.empty()) {
                add_kept(change);
                continue;
            }
            ComparedPart& part = parts_.emplace_back(
                ComparedPart{PartEdit::changed, told[0].what, told[0].was, told[0].is});
            if (change.edit == StepEdit::added) part.edit = PartEdit::added;
            if (change.edit == StepEdit::removed) part.edit = PartEdit::removed;
            if (change.edit == StepEdit::changed) set_changed(part);
        }
    }

    void add_kept(const StepChange& change) {
        const std::string text = step_text(is_.build[*change.is]);
        parts_.push_back(
            {PartEdit::same, "Step " + std::to_string(*change.is + 1), {text}, {text}});
    }

    const Recipe& was_;
    const Recipe& is_;
    RecipeDifference difference_;
    std::set<std::string> changed_;
    std::vector<ComparedPart> parts_;
};

}  // namespace

std::vector<ComparedPart> compared_parts(const Recipe& was, const Recipe& is) {
    return ComparedRecipes(was, is).parts();
}

}  // namespace quarterturn
