#pragma once

#include <QWidget>

#include "indexer/store/library.h"
#include "ui/shell/edits.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace quarterturn {

class SelectionStrip;
class Session;

// The selection in hand: its name, its photos in their order, and which other ones there are. It
// is kept as she changes it.
class SelectionPart : public QWidget {
    Q_OBJECT
  public:
    explicit SelectionPart(Session& session, QWidget* parent = nullptr);

    void refresh();  // throws StoreError
    bool holds(PhotoId photo) const;
    // Puts it at the end, or takes it out.
    void toggle(PhotoId photo);

    const PhotoSelection& in_hand() const { return in_hand_; }
    const std::vector<PhotoId>& photos() const { return in_hand_.photos; }
    // What a new selection is called unless she names it.
    void call_new_ones(const QString& name) { usual_name_ = name; }

  signals:
    void changed();
    void looked_at(quarterturn::PhotoId photo);

  private:
    QLayout* build_head();
    void keep(std::vector<PhotoId> photos);
    void rename();
    void choose(int index);
    std::string free_name() const;
    void fill_names(const std::vector<PhotoSelection>& all);

    Session& session_;
    QString usual_name_;
    PhotoSelection in_hand_;  // without a name: a new one
    QComboBox* names_;
    QLineEdit* name_;
    QPushButton* forget_;
    QLabel* count_;
    QLabel* hint_;
    SelectionStrip* strip_;
};

}  // namespace quarterturn
