#pragma once

#include <functional>
#include <vector>

namespace quarterturn {

// Fields tied to the members of a record. What no field shows stays as it was.
template <class Record>
class BoundFields {
  public:
    // `member(record)` answers a reference to what the field shows.
    template <class OneField, class Member>
    OneField* tie(OneField* field, Member member) {
        show_.push_back([=](Record& record) { field->show_value(member(record)); });
        read_.push_back([=](Record& record) { member(record) = field->value(); });
        return field;
    }

    void show(Record record) {
        for (const auto& show : show_) show(record);
        shown_ = std::move(record);
    }

    void read_into(Record& record) const {
        for (const auto& read : read_) read(record);
    }
    Record value() const {
        Record record = shown_;
        read_into(record);
        return record;
    }

  private:
    using Act = std::function<void(Record&)>;
    std::vector<Act> show_;
    std::vector<Act> read_;
    Record shown_{};
};

}  // namespace quarterturn
