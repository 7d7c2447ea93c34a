#pragma once

#include <QWidget>
#include <map>
#include <optional>

#include "indexer/looks/consents.h"

class QButtonGroup;
class QCheckBox;
class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace quarterturn {

class FormButtons;
class GiverFields;
class Notice;
class OptionalDay;
class Session;

// What the form is about: who, what she says, and for which uses at first.
struct SaidQuestion {
    Client client;
    ConsentSaid said = ConsentSaid::granted;
    std::vector<Use> uses;
};

// Records what a client says of some uses. Withdrawing asks for no more than the day and the way.
class SaidForm : public QWidget {
    Q_OBJECT
  public:
    SaidForm(Session& session, const SaidQuestion& question, QWidget* parent = nullptr);

    void attach(const Path& file);  // copied into the library when she saves

  signals:
    void done();  // saved or left

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void add(const QString& name, QWidget* field);
    void add_uses();
    void add_how_far();
    void add_way();
    void add_paper();
    void add_buttons();
    void show_before();
    std::optional<HowGiven> how() const;  // nothing: not chosen yet
    ConsentEntry entry() const;
    std::vector<Use> chosen_uses() const;
    void choose_paper();
    void save();

    Session& session_;
    SaidQuestion question_;
    QVBoxLayout* column_;
    std::map<Use, QCheckBox*> uses_;
    QButtonGroup* shown_ = nullptr;
    OptionalDay* from_ = nullptr;
    OptionalDay* until_ = nullptr;
    QComboBox* how_ = nullptr;
    QLineEdit* witness_ = nullptr;
    QDateEdit* said_on_ = nullptr;
    GiverFields* giver_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* paper_name_ = nullptr;
    Path paper_;
    Notice* notice_ = nullptr;
    FormButtons* buttons_ = nullptr;
};

}  // namespace quarterturn
