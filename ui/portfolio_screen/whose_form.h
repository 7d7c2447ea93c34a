#pragma once

#include <QWidget>
#include <map>

#include "indexer/record/credit.h"
#include "indexer/record/photo.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace quarterturn {

class Notice;
class OptionalDay;
class Session;

// Whose photo it is: her own, a photographer's with what the licence covers, or somebody else's.
class WhoseForm : public QWidget {
    Q_OBJECT
  public:
    explicit WhoseForm(Session& session, QWidget* parent = nullptr);

    // What she is typing stays while it is the same photo.
    void show_photo(const Photo& photo);

  private:
    void build_licence();
    void show_credit(const std::optional<Credit>& credit);
    void show_what_is_asked();
    std::optional<Credit> credit() const;
    std::vector<PhotoId> photos() const;
    void save();

    Session& session_;
    Photo photo_;
    std::optional<Credit> shown_;
    QComboBox* whose_;
    QWidget* licence_;
    QLineEdit* name_;
    std::map<Use, QCheckBox*> uses_;
    OptionalDay* until_;
    QComboBox* line_;
    QLineEdit* line_words_;
    QCheckBox* whole_sitting_;
    QPushButton* save_;
    Notice* notice_;
};

}  // namespace quarterturn
