#pragma once
// Recipes for RapidCheck, with any text and number in any field.

#include <limits>

#include "indexer/record/recipe/fields.h"
#include "tests/support/arbitrary_text.h"

namespace quarterturn {

// Fills every field it visits.
struct ArbitraryFields {
    template <class Value>
    void always(const char*, Value& value) {
        fill(value);
    }
    template <class Value>
    void if_any(const char*, Value& value) {
        fill(value);
    }

    static void fill(bool& value) { value = *rc::gen::arbitrary<bool>(); }
    static void fill(int& value) { value = *rc::gen::arbitrary<int>(); }
    // RapidCheck's arbitrary doubles are finite.
    static void fill(double& value) { value = *rc::gen::arbitrary<double>(); }
    static void fill(std::string& value) { value = *arbitrary_text(); }
    static void fill(Date& value) {
        value = Date{std::chrono::sys_days{std::chrono::days{*rc::gen::inRange(-90'000, 90'000)}}};
    }
    template <class Word>
    requires std::is_enum_v<Word>
    static void fill(Word& value) {
        int count = 0;
        while (!word(static_cast<Word>(count)).empty()) ++count;
        value = static_cast<Word>(*rc::gen::inRange(0, count));
    }
    template <class Value>
    static void fill(std::optional<Value>& value) {
        if (*rc::gen::arbitrary<bool>()) fill(value.emplace());
    }
    template <class Value>
    static void fill(std::vector<Value>& values) {
        for (int left = *rc::gen::inRange(0, 4); left > 0; --left) fill(values.emplace_back());
    }
    template <class Part>
    requires std::is_class_v<Part>
    static void fill(Part& part) {
        ArbitraryFields fields;
        // Parts that nothing is said of are as common as those that are full.
        if (*rc::gen::inRange(0, 3) > 0) visit_fields(fields, part);
    }
};

inline Recipe arbitrary_recipe() {
    Recipe recipe;
    ArbitraryFields fields;
    visit_fields(fields, recipe);
    return recipe;
}

}  // namespace quarterturn
