#pragma once

#include <functional>
#include <vector>

#include "ui/recipe/field.h"

class QVBoxLayout;

namespace quarterturn {

struct RecordListWords {
    QString add;      // "Add a product"
    QString one;      // "product %1", told by a screen reader before each field
    QString remove;   // "Remove this product"
    QString removed;  // "removed a product", for undo
};

// Records of one kind below each other, with a button for one more.
class RecordList : public Field {
    Q_OBJECT
  public:
    void add_record();

    // The innermost list with the keyboard in one of its rows, or null, and what can be done to
    // that row.
    static RecordList* in_hand();
    void move_row_in_hand(int by);
    void double_row_in_hand();
    void remove_row_in_hand();

  protected:
    explicit RecordList(RecordListWords words);

    virtual Field* make_row() = 0;
    virtual void copy(const Field& from, Field& to) = 0;
    virtual bool has_something(const Field& row) const = 0;
    virtual QWidget* frame_of(Field& row);  // the row with what stands beside it
    virtual void renumber();                // after rows came, went or moved

    void show_number_of_rows(std::size_t number);
    const std::vector<Field*>& rows() const { return rows_; }
    void remove(Field& row);
    void move(Field& row, int by);
    void double_up(Field& row);
    void hide_adding();
    QString number_words(int number) const { return words_.one.arg(number); }
    const RecordListWords& words() const { return words_; }

  private:
    Field& insert_row(std::size_t place);
    void drop_row(std::size_t place);
    std::size_t place_of(const Field& row) const;
    Field* row_in_hand() const;

    RecordListWords words_;
    QVBoxLayout* column_;
    QWidget* add_;
    std::vector<Field*> rows_;
    std::vector<QWidget*> frames_;
};

// Rows that are fields of one record each.
template <class Record, class Row>
class ListOf : public RecordList {
  public:
    ListOf(RecordListWords words, std::function<Row*()> make)
        : RecordList(std::move(words)), make_(std::move(make)) {}

    void show_value(const std::vector<Record>& records) {
        if (records == value()) return;  // a row that she has just added may stay empty
        show_number_of_rows(records.size());
        for (std::size_t i = 0; i < records.size(); ++i) row(*rows()[i]).show_value(records[i]);
        this->renumber();
    }
    std::vector<Record> value() const {
        std::vector<Record> records;
        for (const Field* each : rows()) {
            if (has_something(*each)) records.push_back(row(*each).value());
        }
        return records;
    }

  protected:
    static Row& row(Field& field) { return static_cast<Row&>(field); }
    static const Row& row(const Field& field) { return static_cast<const Row&>(field); }
    Field* make_row() override { return make_(); }
    void copy(const Field& from, Field& to) override { row(to).show_value(row(from).value()); }
    bool has_something(const Field& field) const override { return row(field).value() != Record{}; }

  private:
    std::function<Row*()> make_;
};

}  // namespace quarterturn
