#include "ui/recipe/record_list.h"

#include <QApplication>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

RecordList::RecordList(RecordListWords words)
    : words_(std::move(words)), column_(make_column()), add_(make_quiet_button(words_.add)) {
    auto* all = make_column();
    all->addLayout(column_);
    all->addWidget(add_, 0, Qt::AlignLeading);
    setLayout(all);
    setFocusProxy(add_);
    connect(static_cast<QPushButton*>(add_), &QPushButton::clicked, this, &RecordList::add_record);
}

void RecordList::hide_adding() {
    add_->hide();
    setFocusProxy(nullptr);
}

void RecordList::add_record() {
    Field& row = insert_row(rows_.size());
    renumber();
    row.setFocus();
}

QWidget* RecordList::frame_of(Field& row) {
    auto* frame = new QWidget;
    auto* beside = new QHBoxLayout(frame);
    beside->setContentsMargins(0, 0, 0, 0);
    beside->setSpacing(space(2));
    beside->addWidget(&row, 1);
    QPushButton* remove_button = make_quiet_button(tr("Remove"));
    remove_button->setAccessibleName(words_.remove);
    connect(remove_button, &QPushButton::clicked, this, [this, &row] { remove(row); });
    beside->addWidget(remove_button, 0, Qt::AlignTop);
    return frame;
}

Field& RecordList::insert_row(std::size_t place) {
    Field* row = make_row();
    watch(*row);
    QWidget* frame = frame_of(*row);
    rows_.insert(rows_.begin() + static_cast<std::ptrdiff_t>(place), row);
    frames_.insert(frames_.begin() + static_cast<std::ptrdiff_t>(place), frame);
    column_->insertWidget(static_cast<int>(place), frame);
    frame->show();  // now, so that it can take the keyboard
    return *row;
}

void RecordList::drop_row(std::size_t place) {
    QWidget* frame = frames_[place];
    rows_[place]->disconnect(this);
    rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(place));
    frames_.erase(frames_.begin() + static_cast<std::ptrdiff_t>(place));
    column_->removeWidget(frame);
    frame->hide();
    frame->deleteLater();
}

void RecordList::show_number_of_rows(std::size_t number) {
    while (rows_.size() > number) drop_row(rows_.size() - 1);
    while (rows_.size() < number) insert_row(rows_.size());
}

std::size_t RecordList::place_of(const Field& row) const {
    return static_cast<std::size_t>(std::ranges::find(rows_, &row) - rows_.begin());
}

void RecordList::remove(Field& row) {
    const std::size_t place = place_of(row);
    const bool said_something = has_something(row);
    const std::size_t after = place + 1 < rows_.size() ? place + 1 : place - 1;
    QWidget* next = rows_.size() > 1 ? static_cast<QWidget*>(rows_[after]) : add_;
    next->setFocus();
    drop_row(place);
    renumber();
    if (said_something) emit took_out(words_.removed);
}

void RecordList::move(Field& row, int by) {
    const std::size_t from = place_of(row);
    const std::size_t to = from + static_cast<std::size_t>(by);
    if (to >= rows_.size()) return;
    QWidget* focus = QApplication::focusWidget();
    std::swap(rows_[from], rows_[to]);
    std::swap(frames_[from], frames_[to]);
    column_->removeWidget(frames_[to]);
    column_->insertWidget(static_cast<int>(to), frames_[to]);
    if (focus) focus->setFocus();
    renumber();
    emit changed();
}

void RecordList::double_up(Field& row) {
    Field& second = insert_row(place_of(row) + 1);
    copy(row, second);
    renumber();
    second.setFocus();
    emit changed();
}

void RecordList::renumber() {
    int number = 0;
    for (Field* row : rows_) row->name_it(number_words(++number));
}

Field* RecordList::row_in_hand() const {
    QWidget* focus = QApplication::focusWidget();
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        if (focus && (frames_[i]->isAncestorOf(focus))) return rows_[i];
    }
    return nullptr;
}

RecordList* RecordList::in_hand() {
    for (QWidget* at = QApplication::focusWidget(); at; at = at->parentWidget()) {
        auto* list = qobject_cast<RecordList*>(at);
        if (list && list->row_in_hand()) return list;
    }
    return nullptr;
}

void RecordList::move_row_in_hand(int by) {
    if (Field* row = row_in_hand()) move(*row, by);
}

void RecordList::double_row_in_hand() {
    if (Field* row = row_in_hand()) double_up(*row);
}

void RecordList::remove_row_in_hand() {
    if (Field* row = row_in_hand()) remove(*row);
}

}  // namespace quarterturn
