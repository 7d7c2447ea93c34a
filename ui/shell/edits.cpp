#include "ui/shell/edits.h"

#include "indexer/intake/sort.h"

namespace quarterturn {

void Edits::apply(Library& library, const PhotoChange& change) {
    const std::int64_t before = library.history().newest();
    change(library);
    if (library.history().newest() == before) return;
    done_.emplace_back();
    undone_.clear();
}

void Edits::apply(Library& library, Edit edit) {
    edit.act(library);
    done_.emplace_back(std::move(edit));
    undone_.clear();
}

std::optional<std::string> Edits::undo(Library& library) {
    if (done_.empty() || !done_.back()) {
        auto said = quarterturn::undo(library);
        if (!said) return std::nullopt;
        if (!done_.empty()) done_.pop_back();
        undone_.emplace_back();
        return said;
    }
    Edit& edit = *done_.back();
    edit.take_back(library);
    std::string said = edit.said;
    undone_.push_back(std::move(done_.back()));
    done_.pop_back();
    return said;
}

std::optional<std::string> Edits::redo(Library& library) {
    if (undone_.empty() || !undone_.back()) {
        auto said = quarterturn::redo(library);
        if (!said) return std::nullopt;
        if (!undone_.empty()) undone_.pop_back();
        done_.emplace_back();
        return said;
    }
    Edit& edit = *undone_.back();
    edit.act(library);
    std::string said = edit.said;
    done_.push_back(std::move(undone_.back()));
    undone_.pop_back();
    return said;
}

bool Edits::can_undo(Library& library) const {
    return (!done_.empty() && done_.back()) || library.history().can_undo();
}

bool Edits::can_redo(Library& library) const {
    return (!undone_.empty() && undone_.back()) || library.history().can_redo();
}

void Edits::forget() {
    done_.clear();
    undone_.clear();
}

}  // namespace quarterturn
